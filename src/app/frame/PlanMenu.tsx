// What can be done with the plan as a whole: open another, open an example, save this one.

import { Button } from 'react-aria-components/Button';
import { Header, Menu, MenuItem, MenuSection, MenuTrigger, Separator } from 'react-aria-components/Menu';
import { Popover } from 'react-aria-components/Popover';
import { EXAMPLES, type Example } from '../plans/examples.ts';

export interface PlanMenuProps {
  readonly onOpenFile: () => void;
  readonly onOpenExample: (example: Example) => void;
  readonly onSave: () => void;
}

export function PlanMenu({ name, onOpenFile, onOpenExample, onSave }: PlanMenuProps & { readonly name: string }) {
  return (
    <MenuTrigger>
      <Button className="plan-name" aria-label={`Plan: ${name}`}>
        <span className="plan-name-text">{name}</span>
        <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true"><path d="M2 4.5 6 8.5 10 4.5" /></svg>
      </Button>
      <Popover className="sheet-up" placement="bottom start" offset={2}>
        <Menu className="menu" aria-label="Plan">
          <MenuItem onAction={onOpenFile}>Open a plan…</MenuItem>
          <MenuItem onAction={onSave}>Save to a file…</MenuItem>
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
