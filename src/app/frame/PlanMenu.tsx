// What can be done with the plan as a whole: name it, keep it as a version, save it, open another or an example.

import { Button } from 'react-aria-components/Button';
import { Header, Menu, MenuItem, MenuSection, MenuTrigger, Separator } from 'react-aria-components/Menu';
import { Popover } from 'react-aria-components/Popover';
import { useKeeper } from '../plans/use-kept.ts';
import { EXAMPLES, type Example } from '../plans/examples.ts';

export interface PlanMenuProps {
  readonly onPlans: () => void;
  readonly onNew: () => void;
  readonly onName: () => void;
  readonly onVersions: () => void;
  readonly onOpenFile: () => void;
  readonly onOpenExample: (example: Example) => void;
  /** To the file the plan lies in, or to another. */
  readonly onSave: (to: 'same' | 'another') => void;
}

export function PlanMenu({ name, onPlans, onNew, onName, onVersions, onOpenFile, onOpenExample, onSave }: PlanMenuProps & { readonly name: string }) {
  const file = useKeeper(({ lying }) => (lying.kind === 'own' && lying.head?.file?.handle ? lying.head.file.name : undefined));
  const isOwn = useKeeper(({ lying }) => lying.kind === 'own');
  return (
    <MenuTrigger>
      <Button className="plan-name" aria-label={`Plan: ${name}`}>
        <span className="plan-name-text">{name}</span>
        <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true"><path d="M2 4.5 6 8.5 10 4.5" /></svg>
      </Button>
      <Popover className="sheet-up" placement="bottom start" offset={2}>
        <Menu className="menu" aria-label="Plan">
          <MenuItem onAction={onPlans}>Your plans…</MenuItem>
          <MenuItem onAction={onNew}>New plan</MenuItem>
          <Separator className="menu-line" />
          <MenuItem onAction={onName}>Name this plan…</MenuItem>
          {isOwn && <MenuItem onAction={onVersions}>Versions…</MenuItem>}
          {file !== undefined && <MenuItem onAction={() => onSave('same')}>{`Save to ${file}`}</MenuItem>}
          <MenuItem onAction={() => onSave('another')}>{file === undefined ? 'Save to a file…' : 'Save to another file…'}</MenuItem>
          <Separator className="menu-line" />
          <MenuItem onAction={onOpenFile}>Open a file…</MenuItem>
          {EXAMPLES.length > 0 && <Separator className="menu-line" />}
          {EXAMPLES.length > 0 && (
            <MenuSection>
              <Header className="menu-title">Open an example</Header>
              {EXAMPLES.map((example) => (
                <MenuItem key={example.id} id={example.id} onAction={() => onOpenExample(example)}>{example.name}</MenuItem>
              ))}
            </MenuSection>
          )}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
