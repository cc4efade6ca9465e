// A dotted word, or a button, that opens a small form. What is typed is kept when Done is pressed; Escape leaves it so.

import type { ReactNode } from 'react';
import { Button } from 'react-aria-components/Button';
import { DialogTrigger } from 'react-aria-components/Dialog';
import { PopUp } from '../../words/PopUp.tsx';
import { SpokenWord } from './SpokenWord.tsx';

export interface WordFormProps {
  readonly label: string;
  readonly text: string;
  /** Looks like a button instead of a word in a sentence. */
  readonly as?: 'word' | 'button';
  /** The form; `close` puts the paper away. */
  readonly children: (close: () => void) => ReactNode;
}

export function WordForm({ label, text, as = 'word', children }: WordFormProps) {
  return (
    <DialogTrigger>
      {as === 'word' ? <SpokenWord label={`${label}: ${text}`} text={text} /> : <Button className="button">{text}</Button>}
      <PopUp className="word-form" offset={4}>{children}</PopUp>
    </DialogTrigger>
  );
}
