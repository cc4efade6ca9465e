// What she chooses about the page: how light it is, which hand she works with, how much moves.

import { keptChoice } from './kept-choice.ts';

/** Light or dark: vellum, slate, or as the system has it. */
export const THEME = keptChoice('theme', [
  { id: 'system', name: 'As the system' },
  { id: 'vellum', name: 'Vellum' },
  { id: 'slate', name: 'Slate' },
]);

/** The slip lies on the side of the hand that writes, and what lies beside the table changes over with it. */
export const HAND = keptChoice('hand', [
  { id: 'right', name: 'Right-handed' },
  { id: 'left', name: 'Left-handed' },
]);

/** Whether things glide or are simply there. As usual, the system's own setting decides. */
export const MOVEMENT = keptChoice('movement', [
  { id: 'usual', name: 'Usual' },
  { id: 'less', name: 'Less' },
]);
