// The sizes of a family, typed as lengths, degrees or counts. Sizes that can be drawn are handed on as they are typed. One that cannot
// is said beside its field in the family's own sentence, and waits there: once the others allow it, all are taken together.

import { useState } from 'react';
import type { Family, SizeRule } from '../../model/kit/families.ts';
import { LengthField } from '../words/LengthField.tsx';
import { NumberField } from '../words/NumberField.tsx';
import { Taps } from './Choices.tsx';

export type Sizes = { readonly [size: string]: number };

export interface SizesFormProps {
  readonly family: Family;
  readonly sizes: Sizes;
  /** Told only of sizes that can be drawn. */
  readonly onSizes: (sizes: Sizes) => void;
  readonly onKeep?: () => void;
  readonly onGiveUp?: () => void;
  /** Told whether the picture lags behind what is typed. */
  readonly onWaiting: (waiting: boolean) => void;
}

export function SizesForm({ family, sizes, onSizes, onKeep, onGiveUp, onWaiting }: SizesFormProps) {
  const [waiting, setWaiting] = useState<Sizes>({});
  const drawn = family.draw({ ...sizes, ...waiting });
  const problem = drawn.ok ? undefined : drawn.problem;

  const take = (next: Sizes, to: Sizes) => {
    const canBeDrawn = family.draw(to).ok;
    setWaiting(canBeDrawn ? {} : next);
    onWaiting(!canBeDrawn);
    if (canBeDrawn) onSizes(to);
  };
  const forget = () => {
    setWaiting({});
    onWaiting(false);
    onGiveUp?.();
  };

  return (
    <div className="sizes">
      <Taps
        label="Useful sizes"
        taps={family.useful.map((useful) => ({
          name: useful.name,
          taken: family.sizes.every(({ id, usual }) => (useful.sizes[id] ?? usual) === (waiting[id] ?? sizes[id] ?? usual)),
          onTap: () => {
            take({}, useful.sizes);
            onKeep?.();
          },
        }))}
      />
      <div className="fields">
        {family.sizes.map((rule) => {
          const common = {
            label: rule.name,
            value: waiting[rule.id] ?? sizes[rule.id] ?? rule.usual,
            problem: problem?.field === `sizes.${rule.id}` ? problem.message : undefined,
            onValue: (value: number) => take({ ...waiting, [rule.id]: value }, { ...sizes, ...waiting, [rule.id]: value }),
            ...(onKeep && { onKeep }),
            onGiveUp: forget,
          };
          return <SizeField key={rule.id} rule={rule} {...common} />;
        })}
      </div>
      {problem && !family.sizes.some(({ id }) => problem.field === `sizes.${id}`) && <p className="typed-wrong" role="alert">{problem.message}</p>}
    </div>
  );
}

type FieldProps = Parameters<typeof LengthField>[0];

function SizeField({ rule, ...field }: { readonly rule: SizeRule } & FieldProps) {
  switch (rule.unit) {
    case 'in':
      return <LengthField {...field} />;
    case 'degrees':
      return <NumberField {...field} unit="°" />;
    case 'count':
      return <NumberField {...field} whole />;
  }
}
