// A choice about how the page looks, kept for the next time on this computer and written on the page's root element, where
// the stylesheets read it.

import { useSyncExternalStore } from 'react';

export interface Choice<Id extends string> {
  readonly options: readonly { readonly id: Id; readonly name: string }[];
  /** Takes what was chosen last, or the usual; once, before the first picture. */
  readonly takeKept: () => void;
  readonly choose: (id: Id) => void;
  /** What is chosen now, within React. */
  readonly use: () => Id;
}

/** `name` is the data attribute and the name it is kept under; the first option is the usual one, for which nothing is written. */
export function keptChoice<Id extends string>(name: string, options: Choice<Id>['options']): Choice<Id> {
  const keptAs = `needlefall.${name}`;
  const usual = options[0]!.id;
  const listeners = new Set<() => void>();
  const known = (id: string | null | undefined): Id => options.find((option) => option.id === id)?.id ?? usual;
  const write = (id: Id) => {
    if (id === usual) delete document.documentElement.dataset[name];
    else document.documentElement.dataset[name] = id;
    for (const listener of listeners) listener();
  };
  return {
    options,
    takeKept: () => {
      try {
        write(known(localStorage.getItem(keptAs)));
      } catch {
        // A browser that keeps nothing begins with the usual.
      }
    },
    choose: (id) => {
      write(id);
      try {
        localStorage.setItem(keptAs, id);
      } catch {
        // It holds until the page is closed.
      }
    },
    use: () =>
      useSyncExternalStore(
        (listener) => {
          listeners.add(listener);
          return () => listeners.delete(listener);
        },
        () => known(document.documentElement.dataset[name]),
      ),
  };
}
