// A field a length is typed into, as a quilter measures it: 3 3/4, 3.75, 9.5 cm. A number without a unit is in the plan's.

import { readLength, writeLengthBare } from '../../num/inches.ts';
import { fail } from '../../num/outcome.ts';
import { useSession } from '../use-session.ts';
import { TypedField, type TypedFieldProps } from './TypedField.tsx';
import { exactStyle, useLengths } from './lengths.ts';

export interface LengthFieldProps extends Omit<TypedFieldProps, 'beside'> {
  /** The least and greatest length taken, in inches; said beside the field where it is passed. */
  readonly least?: number;
  readonly most?: number;
}

/** `value` and `onValue` are inches, whatever unit is typed. */
export function LengthField({ least = -Infinity, most = Infinity, ...field }: LengthFieldProps) {
  const unit = useSession((state) => state.evaluation.plan.shownIn);
  const length = useLengths();
  const read = (text: string) => {
    const typed = readLength(text, unit);
    if (!typed.ok) return typed;
    if (typed.value < least) return fail({ message: least === 0 ? 'A length less than nothing cannot be measured.' : `This must be at least ${length(least)}.` });
    if (typed.value > most) return fail({ message: `This must be at most ${length(most)}.` });
    return typed;
  };
  return <TypedField {...field} inputMode="text" read={read} write={(inches) => writeLengthBare(inches, exactStyle(inches, unit))} beside={<span className="typed-unit" aria-hidden="true">{unit}</span>} />;
}
