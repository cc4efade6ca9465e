// Settings: how light it is, and what lengths are shown in.

import { Button } from 'react-aria-components/Button';
import { Header, Menu, MenuItem, MenuSection, MenuTrigger, Separator } from 'react-aria-components/Menu';
import { Popover } from 'react-aria-components/Popover';
import { showIn } from '../../session/choose.ts';
import { THEMES, type Theme, useTheme, wearTheme } from '../look/theme.ts';
import { useSession, useTheSession } from '../use-session.ts';

const UNITS = [
  { id: 'in', name: 'Inches' },
  { id: 'cm', name: 'Centimetres' },
] as const;

export function SettingsMenu() {
  const session = useTheSession();
  const unit = useSession((state) => state.evaluation.plan.shownIn);
  const theme = useTheme();
  return (
    <MenuTrigger>
      <Button className="word"><span>Settings</span></Button>
      <Popover className="sheet-up" placement="bottom end" offset={2}>
        <Menu className="menu" aria-label="Settings">
          <MenuSection
            selectionMode="single"
            disallowEmptySelection
            selectedKeys={[theme]}
            onSelectionChange={(keys) => {
              for (const key of keys) wearTheme(key as Theme);
            }}
          >
            <Header className="menu-title">Light</Header>
            {THEMES.map(({ id, name }) => <MenuItem key={id} id={id}>{name}</MenuItem>)}
          </MenuSection>
          <Separator className="menu-line" />
          <MenuSection
            selectionMode="single"
            disallowEmptySelection
            selectedKeys={[unit]}
            onSelectionChange={(keys) => {
              for (const key of keys) showIn(session, key as 'in' | 'cm');
            }}
          >
            <Header className="menu-title">Lengths in this plan</Header>
            {UNITS.map(({ id, name }) => <MenuItem key={id} id={id}>{name}</MenuItem>)}
          </MenuSection>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
