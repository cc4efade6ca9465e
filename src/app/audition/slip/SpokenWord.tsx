// A dotted word: pressed like a button, but it breaks over lines like the words around it.

import { Pressable } from 'react-aria-components/Pressable';
import { Said } from '../../words/Said.tsx';

export interface SpokenWordProps {
  /** What it says, for those who hear it, with what it changes: "What is put: cross". */
  readonly label: string;
  readonly text: string;
  readonly className?: string;
  /** Left out where pressing opens something of its own. */
  readonly onPress?: () => void;
}

export function SpokenWord({ label, text, className = '', onPress }: SpokenWordProps) {
  return (
    <Pressable {...(onPress && { onPress })}>
      <span role="button" tabIndex={0} className={`spoken-word ${className}`} aria-label={label}><Said>{text}</Said></span>
    </Pressable>
  );
}
