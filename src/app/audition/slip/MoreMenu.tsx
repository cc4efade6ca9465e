// Further commands on one thing, behind one word.

import type { ReactNode } from 'react';
import { Button } from 'react-aria-components/Button';
import { Menu, MenuItem, MenuTrigger } from 'react-aria-components/Menu';
import { Popover } from 'react-aria-components/Popover';

export interface Command {
  readonly name: string;
  readonly onDo: () => void;
  readonly isDisabled?: boolean;
}

export interface MoreMenuProps {
  /** What the commands are about: "pass A to B". */
  readonly about: string;
  /** The word that opens it; "More" when left out. */
  readonly word?: string;
  readonly as?: 'word' | 'button' | 'spoken-word';
  readonly commands: readonly Command[];
  /** Stands before the word. */
  readonly sign?: ReactNode;
}

export function MoreMenu({ about, word = 'More', as = 'word', commands, sign }: MoreMenuProps) {
  return (
    <MenuTrigger>
      <Button className={as} aria-label={`${word}: ${about}`}>{sign}<span>{word}</span></Button>
      <Popover className="sheet-up" placement="bottom end" offset={2}>
        <Menu className="menu" aria-label={about} onAction={(key) => commands[Number(key)]?.onDo()}>
          {commands.map(({ name, isDisabled }, i) => <MenuItem key={i} id={String(i)} textValue={name} isDisabled={isDisabled === true}>{name}</MenuItem>)}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
