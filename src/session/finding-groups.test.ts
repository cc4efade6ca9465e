import { describe, expect, it } from 'vitest';
import type { Finding, Severity } from '../check/finding.ts';
import { countBySeverity, groupFindings } from './finding-groups.ts';

const finding = (severity: Severity, code: string, measured: number, where: Finding['where'] = {}): Finding => ({ code, severity, message: `${code} ${measured}`, where, measured, limit: 0.125 });

describe('groups of findings', () => {
  const findings = [
    finding('note', 'missed-edge', 1, { placement: 'a' }),
    finding('warning', 'near-seam', 0.1, { area: 'x', placement: 'a' }),
    finding('error', 'raw-edge', 0.2, { placement: 'b' }),
    finding('warning', 'near-seam', 0.0, { area: 'y', placement: 'a' }),
    finding('warning', 'near-seam', 0.1, { area: 'y', placement: 'c' }),
  ];
  const groups = groupFindings(findings);

  it('number what is to be mended first', () => {
    expect(groups.map(({ number, severity, code }) => `${number} ${severity} ${code}`)).toEqual(['1 error raw-edge', '2 warning near-seam', '3 warning near-seam', '4 note missed-edge']);
  });

  it('gather the same thing in many places, the worst first', () => {
    expect(groups[1]!.findings.map(({ where }) => where.area)).toEqual(['y', 'x']);
    expect(groups[1]!.worst.measured).toBe(0);
  });

  it('hold every finding once', () => {
    expect(groups.flatMap((group) => group.findings)).toHaveLength(findings.length);
    expect(new Set(groups.flatMap((group) => group.findings))).toEqual(new Set(findings));
    expect(countBySeverity(groups)).toEqual({ error: 1, warning: 2, note: 1 });
  });
});
