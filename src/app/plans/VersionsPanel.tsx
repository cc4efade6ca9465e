// The versions of a plan: keep this state under a name, go back to an earlier one, make a plan of it.

import { type FormEvent, useCallback, useId, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog, Heading } from 'react-aria-components/Dialog';
import { Menu, MenuItem, MenuTrigger } from 'react-aria-components/Menu';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { Popover } from 'react-aria-components/Popover';
import { modal } from '../frame/modal.ts';
import { planOf } from '../../session/store.ts';
import { useTheSession } from '../use-session.ts';
import { NameDialog } from './NameDialog.tsx';
import { PlanPicture } from './PlanPicture.tsx';
import { pictureOfVersion } from './pictures.ts';
import { listPlans } from './plan-list.ts';
import type { Version } from './records.ts';
import { nameOfVersion, writeSize, writeWhen } from './said.ts';
import { download, fileNameOf } from './save.ts';
import { useKept, useKeeper, useNow, useTheKeeper } from './use-kept.ts';
import { type DeletedVersion, deleteVersion, keepVersion, listVersions, nameVersion, putVersionBack, textOfVersion } from './versions.ts';
import './plans.css';

export interface VersionsPanelProps {
  readonly plan: string;
  readonly onGoBack: (version: Version) => void;
  readonly onMakePlan: (version: Version) => void;
  readonly onClose: () => void;
}

export function VersionsPanel({ plan, onGoBack, onMakePlan, onClose }: VersionsPanelProps) {
  const versions = useKept(useCallback(() => listVersions(plan), [plan]));
  const head = useKept(useCallback(async () => (await listPlans()).find(({ id }) => id === plan), [plan]));
  const lying = useKeeper((state) => (state.lying.kind === 'own' ? state.lying.id : undefined));
  const [said, say] = useState<{ readonly text: string; readonly deleted?: DeletedVersion }>();
  const [naming, setNaming] = useState<Version>();
  const now = useNow();

  const remove = async (version: Version) => {
    const deleted = await deleteVersion(version.id);
    say({ text: `${nameOfVersion(version)} is deleted.`, ...(deleted && { deleted }) });
  };
  const attempt = (work: Promise<unknown>) => {
    work.catch(() => say({ text: 'That could not be done: the browser did not let it be kept.' }));
  };

  return (
    <ModalOverlay className="over-all" isOpen isDismissable onOpenChange={(open) => !open && onClose()}>
      <Modal className="sheet-up plans-sheet narrow">
        <Dialog ref={modal} className="dialog plans">
          <div className="plans-head">
            <Heading slot="title">{`Versions of ${head?.name ?? 'this plan'}`}</Heading>
          </div>
          {plan === lying && <KeepThisAs plan={plan} onKept={(name) => say({ text: `${name} is kept.` })} onFailed={(text) => say({ text })} />}
          <div className="plans-body">
            {versions?.length === 0 && <p className="sentence">None yet. The state before each burst of changes is kept by itself; what you name here stays for good.</p>}
            <ul className="version-rows">
              {versions?.map((version) => (
                <VersionRow
                  key={version.id}
                  version={version}
                  now={now}
                  onGoBack={() => onGoBack(version)}
                  onMakePlan={() => onMakePlan(version)}
                  onName={() => setNaming(version)}
                  onSave={() => attempt(textOfVersion(version.id).then((text) => download(new Blob([text], { type: 'application/json' }), `${fileNameOf(`${head?.name ?? 'plan'} ${nameOfVersion(version)}`)}.needlefall.json`)))}
                  onDelete={() => attempt(remove(version))}
                />
              ))}
            </ul>
          </div>
          <div className="plans-foot">
            <p className="aside" role="status">{said?.text ?? 'Of the last hour every one stays, of the last day one an hour, then one a day. Named ones stay.'}</p>
            {said?.deleted && <Button className="button" autoFocus onPress={() => attempt(putVersionBack(said.deleted!).then(() => say({ text: 'It is back.' })))}>Bring it back</Button>}
            <Button className="button" onPress={onClose}>Back to the table</Button>
          </div>
        </Dialog>
        {naming && (
          <NameDialog
            title="Name this version"
            label="Name"
            name={naming.name ?? ''}
            done="Name it"
            onDone={(name) => {
              setNaming(undefined);
              attempt(nameVersion(naming, name));
            }}
            onGiveUp={() => setNaming(undefined)}
          />
        )}
      </Modal>
    </ModalOverlay>
  );
}

interface KeepThisAsProps {
  readonly plan: string;
  readonly onKept: (name: string) => void;
  readonly onFailed: (text: string) => void;
}

function KeepThisAs({ plan, onKept, onFailed }: KeepThisAsProps) {
  const session = useTheSession();
  const keeper = useTheKeeper();
  const [name, setName] = useState('');
  const id = useId();
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    const trimmed = name.trim();
    if (trimmed === '') return;
    const state = planOf(session.getState());
    try {
      await keeper.settle();
      await keepVersion(plan, state, 'named', trimmed);
      setName('');
      onKept(trimmed);
    } catch {
      onFailed('This version could not be kept: the browser has no room for it.');
    }
  };
  return (
    <form className="keep-as" onSubmit={(event) => void keep(event)}>
      <div className="field">
        <label htmlFor={id}>Keep this as</label>
        <input id={id} type="text" autoComplete="off" maxLength={200} value={name} onChange={({ target }) => setName(target.value)} />
      </div>
      <Button className="button main" type="submit" isDisabled={name.trim() === ''}>Keep it</Button>
    </form>
  );
}

interface VersionRowProps {
  readonly version: Version;
  readonly now: number;
  readonly onGoBack: () => void;
  readonly onMakePlan: () => void;
  readonly onName: () => void;
  readonly onSave: () => void;
  readonly onDelete: () => void;
}

function VersionRow({ version, now, onGoBack, onMakePlan, onName, onSave, onDelete }: VersionRowProps) {
  const paint = useCallback(() => pictureOfVersion(version.id), [version.id]);
  const name = nameOfVersion(version);
  const when = writeWhen(version.at, now);
  const canBeRead = version.reason !== 'unreadable';
  return (
    <li className="version-row">
      <PlanPicture paint={paint} />
      <div className="plan-words">
        <p className="plan-card-name">{name}</p>
        <p className="aside">{`Kept ${when}, ${writeSize(version.size)}`}</p>
      </div>
      {canBeRead && <Button className="button" aria-label={`Go back to this: ${name}, ${when}`} onPress={onGoBack}>Go back to this</Button>}
      <MenuTrigger>
        <Button className="button more" aria-label={`More for ${name}, ${when}`}>More</Button>
        <Popover className="sheet-up" placement="bottom end" offset={2}>
          <Menu className="menu" aria-label={name}>
            {canBeRead && <MenuItem onAction={onMakePlan}>Make a plan of it</MenuItem>}
            <MenuItem onAction={onName}>Name…</MenuItem>
            <MenuItem onAction={onSave}>Save to a file…</MenuItem>
            <MenuItem onAction={onDelete}>Delete</MenuItem>
          </Menu>
        </Popover>
      </MenuTrigger>
    </li>
  );
}
