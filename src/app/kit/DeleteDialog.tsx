// Asks before something in use leaves the kit: where it is used, and what is to become of that. Nothing is lost silently.

import { useId, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog, Heading } from 'react-aria-components/Dialog';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { modal } from '../frame/modal.ts';
import { type UseOnSheet, countUses } from '../../session/kit/uses.ts';

export interface DeleteDialogProps {
  readonly name: string;
  readonly uses: readonly UseOnSheet[];
  /** Things that can take its place, by id. */
  readonly others: readonly { readonly id: string; readonly name: string }[];
  /** What becomes of the placements without another in its place; undefined where one must be named. */
  readonly otherwise: string | undefined;
  readonly question: string;
  readonly onDelete: (instead: string | undefined) => void;
  /** A milder way out. */
  readonly milder?: { readonly name: string; readonly onPress: () => void };
  readonly onLeave: () => void;
}

export function DeleteDialog({ name, uses, others, otherwise, question, onDelete, milder, onLeave }: DeleteDialogProps) {
  const id = useId();
  const [instead, setInstead] = useState(otherwise === undefined ? (others[0]?.id ?? '') : '');
  const count = countUses(uses);
  return (
    <ModalOverlay className="over-all" isOpen isDismissable onOpenChange={(open) => !open && onLeave()}>
      <Modal className="sheet-up dialog-sheet">
        <Dialog ref={modal} className="dialog" role="alertdialog">
          <Heading slot="title">{`Delete ${name}?`}</Heading>
          <p className="sentence">{`It is used in ${count === 1 ? 'one placement' : `${count} placements`} on ${uses.length === 1 ? 'one sheet' : `${uses.length} sheets`}.`}</p>
          <ul className="uses">
            {uses.map((use) => <li key={use.sheet}>{sayUse(use)}</li>)}
          </ul>
          <div className="field kit-select">
            <label htmlFor={id}>{question}</label>
            <select id={id} value={instead} onChange={({ target }) => setInstead(target.value)}>
              {otherwise !== undefined && <option value="">{otherwise}</option>}
              {others.map((other) => <option key={other.id} value={other.id}>{other.name}</option>)}
            </select>
          </div>
          <p className="aside">Undo brings all of it back.</p>
          <div className="dialog-foot">
            <Button className="button" onPress={onLeave}>Leave it so</Button>
            {milder && <Button className="button" onPress={milder.onPress}>{milder.name}</Button>}
            <Button className="button main" onPress={() => onDelete(instead === '' ? undefined : instead)}>Delete</Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** "Corner arcs: 2 placements." */
export function sayUse({ name, placements, chosen }: UseOnSheet): string {
  return `${name}: ${placements.length === 1 ? '1 placement' : `${placements.length} placements`}${chosen ? '' : ', not chosen to be sewn'}.`;
}
