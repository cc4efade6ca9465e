// The list of plans: a true picture of each, what it is called, when it was changed; and what can be done with it.

import { useCallback, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog, Heading } from 'react-aria-components/Dialog';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { modal } from '../frame/modal.ts';
import { namePlan } from '../../session/choose.ts';
import { useTheSession } from '../use-session.ts';
import { NameDialog } from './NameDialog.tsx';
import { PlanCard } from './PlanCard.tsx';
import { bringBack, deletePlan, duplicatePlan, forgetPlan, listPlans, nameKept } from './plan-list.ts';
import type { PlanHead } from './records.ts';
import { writeSize, writeWhen } from './said.ts';
import { storageWords } from './storage.ts';
import { useKept, useKeeper, useNow, useTheKeeper } from './use-kept.ts';
import './plans.css';

export interface PlansPanelProps {
  readonly onLay: (id: string) => void;
  readonly onNew: () => void;
  readonly onOpenFile: () => void;
  readonly onVersions: (id: string) => void;
  readonly onClose: () => void;
}

export function PlansPanel({ onLay, onNew, onOpenFile, onVersions, onClose }: PlansPanelProps) {
  const session = useTheSession();
  const keeper = useTheKeeper();
  const heads = useKept(listPlans);
  const storage = useKept(storageWords);
  const lying = useKeeper((state) => (state.lying.kind === 'own' ? state.lying.id : undefined));
  const [naming, setNaming] = useState<PlanHead>();
  const [said, say] = useState<{ readonly text: string; readonly deleted?: PlanHead }>();
  const now = useNow();
  const plans = heads?.filter(({ deleted }) => deleted === undefined);
  const deleted = heads?.filter((head) => head.deleted !== undefined) ?? [];

  const attempt = useCallback((work: Promise<unknown>) => {
    work.catch(() => say({ text: 'That could not be done: the browser did not let it be kept.' }));
  }, []);
  const name = (head: PlanHead, newName: string) => {
    setNaming(undefined);
    if (head.id === lying) namePlan(session, newName);
    else attempt(nameKept(head.id, newName));
  };
  const duplicate = async (head: PlanHead) => {
    await keeper.settle();
    const id = await duplicatePlan(head.id);
    say({ text: id === undefined ? `${head.name} could not be read.` : `A copy of ${head.name} lies beside it.` });
  };
  const remove = async (head: PlanHead) => {
    await keeper.settle();
    await deletePlan(head.id);
    say({ text: `${head.name} is deleted.`, deleted: head });
  };

  return (
    <ModalOverlay className="over-all" isOpen isDismissable onOpenChange={(open) => !open && onClose()}>
      <Modal className="sheet-up plans-sheet">
        <Dialog ref={modal} className="dialog plans">
          <div className="plans-head">
            <Heading slot="title">Your plans</Heading>
            <Button className="button" onPress={onOpenFile}>Open a file…</Button>
            <Button className="button main" onPress={onNew}>New plan</Button>
          </div>
          <div className="plans-body">
            {plans?.length === 0 && <p className="sentence">No plan of yours yet. Change an example, and it becomes your own; or begin with a new top.</p>}
            <ul className="plan-cards">
              {plans?.map((head) => (
                <PlanCard
                  key={head.id}
                  head={head}
                  now={now}
                  isLying={head.id === lying}
                  onLay={() => onLay(head.id)}
                  onName={() => setNaming(head)}
                  onDuplicate={() => attempt(duplicate(head))}
                  onVersions={() => onVersions(head.id)}
                  onDelete={() => attempt(remove(head))}
                />
              ))}
            </ul>
            {deleted.length > 0 && (
              <section className="deleted-plans" aria-label="Deleted lately">
                <h3>Deleted lately</h3>
                <p className="aside">Each is kept for 30 days.</p>
                <ul>
                  {deleted.map((head) => (
                    <li key={head.id}>
                      <span className="deleted-name">{head.name}</span>
                      <span className="aside">{`deleted ${writeWhen(head.deleted!, now)}, ${writeSize(head.size)}`}</span>
                      <Button className="button" aria-label={`Bring back ${head.name}`} onPress={() => attempt(bringBack(head.id).then(() => say({ text: `${head.name} is back.` })))}>Bring back</Button>
                      <Button className="button" aria-label={`Delete for good: ${head.name}`} onPress={() => attempt(forgetPlan(head.id))}>Delete for good</Button>
                    </li>
                  ))}
                </ul>
              </section>
            )}
          </div>
          <div className="plans-foot">
            <p className="aside" role="status">{said?.text ?? storage ?? ''}</p>
            {said?.deleted && (
              <Button className="button" autoFocus onPress={() => attempt(bringBack(said.deleted!.id).then(() => say({ text: `${said.deleted!.name} is back.` })))}>Bring it back</Button>
            )}
            <Button className="button" onPress={onClose}>Back to the table</Button>
          </div>
        </Dialog>
        {naming && (
          <NameDialog title="Name this plan" label="Name" name={naming.name} done="Name it" onDone={(newName) => name(naming, newName)} onGiveUp={() => setNaming(undefined)} />
        )}
      </Modal>
    </ModalOverlay>
  );
}
