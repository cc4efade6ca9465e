// One plan of the list.

import { useCallback } from 'react';
import { Button } from 'react-aria-components/Button';
import { Menu, MenuItem, MenuTrigger } from 'react-aria-components/Menu';
import { Popover } from 'react-aria-components/Popover';
import { PlanPicture } from './PlanPicture.tsx';
import { pictureOfPlan } from './pictures.ts';
import type { PlanHead } from './records.ts';
import { writeAbout } from './said.ts';

export interface PlanCardProps {
  readonly head: PlanHead;
  readonly now: number;
  readonly isLying: boolean;
  readonly onLay: () => void;
  readonly onName: () => void;
  readonly onDuplicate: () => void;
  readonly onVersions: () => void;
  readonly onDelete: () => void;
}

export function PlanCard({ head, now, isLying, onLay, onName, onDuplicate, onVersions, onDelete }: PlanCardProps) {
  const { id, name, revision } = head;
  // A picture belongs to a revision: another one is asked for when the plan has changed.
  const paint = useCallback(() => pictureOfPlan(id), [id, revision]);
  return (
    <li className={`plan-card${isLying ? ' lying' : ''}`}>
      <Button className="plan-lay" aria-label={isLying ? `${name}, on the table` : `Lay ${name} on the table`} onPress={onLay}>
        <PlanPicture paint={paint} />
      </Button>
      <div className="plan-words">
        <p className="plan-card-name">{name}</p>
        <p className="aside">{writeAbout(head, now)}</p>
        {isLying && <p className="aside lies">On the table</p>}
      </div>
      <MenuTrigger>
        <Button className="button more" aria-label={`More for ${name}`}>More</Button>
        <Popover className="sheet-up" placement="bottom end" offset={2}>
          <Menu className="menu" aria-label={name}>
            <MenuItem onAction={onName}>Name…</MenuItem>
            <MenuItem onAction={onDuplicate}>Make a copy</MenuItem>
            <MenuItem onAction={onVersions}>Versions…</MenuItem>
            <MenuItem onAction={onDelete}>Delete</MenuItem>
          </Menu>
        </Popover>
      </MenuTrigger>
    </li>
  );
}
