// What is wrong with a file that could not be opened: everything at once, in plain words, and that nothing was lost.

import { Button } from 'react-aria-components/Button';
import { Dialog, Heading } from 'react-aria-components/Dialog';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { modal } from './modal.ts';
import type { NotOpened } from '../plans/open.ts';

/** A list longer than this is cut, and says how much of it is left. */
const MOST_SHOWN = 100;

export function NotOpenedDialog({ problem, onClose }: { readonly problem: NotOpened; readonly onClose: () => void }) {
  const { fileName, problems } = problem;
  const count = problems.length;
  return (
    <ModalOverlay className="over-all" isOpen isDismissable onOpenChange={(open) => !open && onClose()}>
      <Modal className="sheet-up dialog-sheet">
        <Dialog ref={modal} className="dialog" role="alertdialog">
          <Heading slot="title">This file could not be opened</Heading>
          <p className="sentence">
            {count === 1 ? 'One thing stands in the way' : `${count} things stand in the way`} in <b>{fileName}</b>. The plan on your table is untouched, and so is the file.
          </p>
          <ol className="problems" tabIndex={0} aria-label="What is wrong with the file">
            {problems.slice(0, MOST_SHOWN).map(({ message }, index) => <li key={index}>{message}</li>)}
            {count > MOST_SHOWN && <li>And {count - MOST_SHOWN} more.</li>}
          </ol>
          <div className="dialog-foot">
            <Button className="button main" onPress={onClose} autoFocus>Back to the table</Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
