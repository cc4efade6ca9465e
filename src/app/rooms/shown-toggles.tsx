// What is shown on the table, each layer under its plain name with a small picture of its line.

import { Switch } from '../frame/Switch.tsx';
import { SHOWN_GROUPS } from '../../session/shown.ts';
import { show } from '../../session/look.ts';
import { useSession, useTheSession } from '../use-session.ts';

export function ShownToggles() {
  const session = useTheSession();
  const shown = useSession((state) => state.shown);
  return (
    <ul className="shown">
      {SHOWN_GROUPS.map(({ id, name, layers }) => (
        <li key={id}>
          <Switch name={name} on={shown.has(id)} onChange={(on) => show(session, id, on)}>
            <svg className="line-sample" viewBox="0 0 44 20" width="44" height="20" aria-hidden="true">
              <g className={`layer ${SAMPLE_OF[layers[0]] ?? layers[0]}`}><path className={layers[0] === 'ground' ? 'cloth-sample' : undefined} d={layers[0] === 'ground' ? 'M2 3H42V17H2Z' : 'M2 14C12 14 12 5 22 5S32 14 42 14'} /></g>
            </svg>
          </Switch>
        </li>
      ))}
    </ul>
  );
}

/** Groups whose first layer is a fill or lettering show the line of another. */
const SAMPLE_OF: { readonly [layer: string]: string } = { template: 'template-edge', label: 'none' };
