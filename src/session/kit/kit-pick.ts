// What is picked out in Kit: the thing its slip is about.

export type KitPick =
  | { readonly kind: 'template'; readonly template: string }
  /** The etchings of a template, on the enlarged template; `etching`: the one picked out. */
  | { readonly kind: 'etchings'; readonly template: string; readonly etching?: string }
  | { readonly kind: 'new-template' }
  | { readonly kind: 'foot'; readonly foot: string }
  | { readonly kind: 'thread' }
  | { readonly kind: 'bobbin' }
  | { readonly kind: 'batting' }
  | { readonly kind: 'machine' };
