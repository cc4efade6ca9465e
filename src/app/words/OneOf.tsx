// One of a few: the choices stand side by side, the chosen one filled.

import { Label } from 'react-aria-components/Label';
import { Radio, RadioGroup } from 'react-aria-components/RadioGroup';
import './one-of.css';

export interface OneOfProps<Id extends string> {
  readonly label: string;
  readonly options: readonly { readonly id: Id; readonly name: string }[];
  readonly chosen: Id | undefined;
  readonly onChoose: (id: Id) => void;
}

export function OneOf<Id extends string>({ label, options, chosen, onChoose }: OneOfProps<Id>) {
  return (
    <RadioGroup className="one-of" value={chosen ?? null} onChange={(id) => onChoose(id as Id)} orientation="horizontal">
      <Label>{label}</Label>
      <div className="one-of-row">
        {options.map(({ id, name }) => <Radio key={id} value={id} className="one-of-option">{name}</Radio>)}
      </div>
    </RadioGroup>
  );
}
