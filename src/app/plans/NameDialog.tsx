// Asks for a name.

import { useId, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog, Heading } from 'react-aria-components/Dialog';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { modal } from '../frame/modal.ts';

export interface NameDialogProps {
  readonly title: string;
  readonly label: string;
  readonly name: string;
  readonly done: string;
  /** Told at every letter, with a name that is more than spaces. */
  readonly onTyped?: (name: string) => void;
  readonly onDone: (name: string) => void;
  readonly onGiveUp: () => void;
}

export function NameDialog({ title, label, name, done, onTyped, onDone, onGiveUp }: NameDialogProps) {
  const [typed, setTyped] = useState(name);
  const id = useId();
  const trimmed = typed.trim();
  return (
    <ModalOverlay className="over-all" isOpen isDismissable onOpenChange={(open) => !open && onGiveUp()}>
      <Modal className="sheet-up dialog-sheet name-sheet">
        <Dialog ref={modal} className="dialog">
          <Heading slot="title">{title}</Heading>
          <form
            onSubmit={(event) => {
              event.preventDefault();
              if (trimmed !== '') onDone(trimmed);
            }}
          >
            <div className="field">
              <label htmlFor={id}>{label}</label>
              <input
                id={id}
                type="text"
                autoComplete="off"
                maxLength={200}
                autoFocus
                value={typed}
                onFocus={({ target }) => target.select()}
                onChange={({ target }) => {
                  setTyped(target.value);
                  if (target.value.trim() !== '') onTyped?.(target.value.trim());
                }}
              />
            </div>
            <div className="dialog-foot">
              <Button className="button" onPress={onGiveUp}>Leave it so</Button>
              <Button className="button main" type="submit" isDisabled={trimmed === ''}>{done}</Button>
            </div>
          </form>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
