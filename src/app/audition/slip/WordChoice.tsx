// A dotted word that opens a list of what could stand in its place.

import { Menu, MenuItem, MenuTrigger } from 'react-aria-components/Menu';
import { Popover } from 'react-aria-components/Popover';
import { Said } from '../../words/Said.tsx';
import { SpokenWord } from './SpokenWord.tsx';

export interface WordOption {
  readonly id: string;
  readonly name: string;
}

export interface WordChoiceProps {
  /** What is chosen, for those who hear it: "What is put". */
  readonly label: string;
  readonly text: string;
  /** Asked when the list opens. */
  readonly options: () => readonly WordOption[];
  readonly chosen?: string | undefined;
  readonly onChoose: (id: string) => void;
}

export function WordChoice({ label, text, options, chosen, onChoose }: WordChoiceProps) {
  return (
    <MenuTrigger>
      <SpokenWord label={`${label}: ${text}`} text={text} />
      <Popover className="sheet-up" placement="bottom start" offset={4}>
        <Choices label={label} options={options} chosen={chosen} onChoose={onChoose} />
      </Popover>
    </MenuTrigger>
  );
}

function Choices({ label, options, chosen, onChoose }: Omit<WordChoiceProps, 'text'>) {
  const known = options();
  return (
    <Menu className="menu" aria-label={label} selectionMode="single" selectedKeys={chosen === undefined ? [] : [chosen]} onAction={(key) => onChoose(String(key))}>
      {known.length === 0
        ? [<MenuItem key="" id="" isDisabled>There is nothing else here.</MenuItem>]
        : known.map(({ id, name }) => <MenuItem key={id} id={id} textValue={name}><span><Said>{name}</Said></span></MenuItem>)}
    </Menu>
  );
}
