// What a template is, in a few words: "Leaf, 8 by 3 1/2 in".

import { boundsOf, sizeOfBounds } from '../../geometry/bounds.ts';
import { familyById } from '../../model/kit/families.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import { styleOf } from '../../model/length-style.ts';
import type { Template } from '../../model/plan.ts';
import { writeLength, writeLengthBare } from '../../num/inches.ts';
import { useSession } from '../use-session.ts';

/** Its kind and how large it is over all. */
export function useTemplateWords(): (template: Template) => string {
  const shownIn = useSession((state) => state.evaluation.plan.shownIn);
  return (template) => {
    const kind = 'family' in template ? (familyById(template.family)?.name ?? 'No such family') : 'Own outline';
    const shape = shapeOf(template);
    if (!shape.ok) return `${kind}, cannot be drawn`;
    const { width, height } = sizeOfBounds(boundsOf(shape.value.outline));
    const style = styleOf({ shownIn });
    return `${kind}, ${writeLengthBare(width, style)} by ${writeLength(height, style)}`;
  };
}
