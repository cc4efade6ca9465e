// Gestures as state nodes. A node hears what the hand does and answers with the node to be in next; itself to stay.
// What a node must remember (where the finger went down, what the view was) it was given when it was made, so that
// Escape can always return to where the gesture began.

import type { ScreenPoint } from '../view.ts';

/** What a hand, a wheel or a key does at the table. Points are CSS pixels from its upper left corner, times milliseconds. */
export type TableEvent =
  | { readonly kind: 'down'; readonly pointer: number; readonly at: ScreenPoint; readonly by: Hand; readonly time: number; readonly held?: Held }
  | { readonly kind: 'move'; readonly pointer: number; readonly at: ScreenPoint; readonly by: Hand; readonly time: number; readonly held?: Held }
  | { readonly kind: 'up'; readonly pointer: number; readonly at: ScreenPoint; readonly time: number }
  /** The pointer was taken away by the system, or left the table without being down. */
  | { readonly kind: 'lost'; readonly pointer: number }
  | { readonly kind: 'wheel'; readonly at: ScreenPoint; readonly dx: number; readonly dy: number; readonly held: Held; readonly time: number }
  | { readonly kind: 'key'; readonly key: string; readonly held: Held }
  /** Keys are let go, or can no longer be heard. */
  | { readonly kind: 'keys-up' };

export type Hand = 'mouse' | 'touch' | 'pen';

export interface Held {
  readonly shift: boolean;
  readonly control: boolean;
  readonly alt: boolean;
}

export interface GestureNode {
  readonly name: string;
  readonly on: (event: TableEvent) => GestureNode;
}

export interface Gestures {
  readonly send: (event: TableEvent) => void;
  /** The name of the node it is in, for tests and for the shape of the pointer. */
  readonly name: () => string;
}

/** Runs nodes one after the other, beginning with the one at rest. */
export function runGestures(rest: GestureNode, onChange: (name: string) => void = () => undefined): Gestures {
  let node = rest;
  let told = node.name;
  return {
    name: () => node.name,
    send: (event) => {
      node = node.on(event);
      // A node that lets another do its work changes its name and stays itself.
      const { name } = node;
      if (name === told) return;
      told = name;
      onChange(name);
    },
  };
}
