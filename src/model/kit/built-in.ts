// The kit a new plan starts with: ordinary shapes in ordinary sizes, and feet to choose from. Thickness goes by shank:
// about 1/4 in for high shanks and frame machines, about 1/8 in for low ones.

import type { Foot, Grips, Kit, Shank, Template } from '../plan.ts';

/** Sheet thickness by the shank it is meant for, in inches. */
const THICK = 1 / 4;
const THIN = 1 / 8;

/** The feet and templates of a new plan; every template is of a built-in family and can be drawn. */
export const BUILT_IN_KIT: Kit = {
  feet: {
    'half-round': foot('Half-inch round, high shank', 1 / 2, 'high'),
    'half-round-low': foot('Half-inch round, low shank', 1 / 2, 'low'),
    'wide-round': foot('Wider round, measured 9/16', 9 / 16, 'high'),
    'open-foot': foot('Open foot, needle 1/32 left', 1 / 2, 'low', -1 / 32),
  },
  templates: {
    'straight-12': template('Straight 12', 'straight-edge', {}, THICK, 'both-faces'),
    'ditch-10': template('Ditch 10', 'straight-edge', { length: 10, width: 3, ditch: 0.5 }, THIN, 'one-face'),
    'arc-8': template('Arc 8', 'arc-band', {}, THICK, 'one-face'),
    'arc-4': template('Arc 4', 'arc-band', { radius: 4, width: 1.5, sweep: 90 }, THIN, 'none'),
    'circle-6': template('Circle 6', 'circle', {}, THICK, 'both-faces'),
    'circle-3': template('Circle 3', 'circle', { diameter: 3 }, THIN, 'none'),
    'ring-6': template('Ring 6', 'ring', {}, THICK, 'one-face'),
    'row-of-windows': template('Row of windows', 'round-windows', {}, THICK, 'both-faces'),
    'oval-8': template('Oval 8', 'oval', {}, THICK, 'none'),
    'leaf-8': template('Leaf 8', 'leaf', {}, THICK, 'none'),
    'leaf-4': template('Leaf 4', 'leaf', { length: 4, width: 2 }, THIN, 'none'),
    'shell-4': template('Shell 4', 'clamshell', {}, THICK, 'one-face'),
    'teardrop-5': template('Teardrop 5', 'teardrop', {}, THICK, 'none'),
    'long-swell': template('Long swell', 's-curve', {}, THICK, 'none'),
    'low-hill': template('Low hill', 'hill', {}, THICK, 'both-faces'),
    'wave-of-three': template('Wave of three', 'wave', {}, THICK, 'one-face'),
    'humps-2': template('Two-inch humps', 'scallop', {}, THIN, 'none'),
    'cable-3': template('Three-link cable', 'cable', {}, THICK, 'none'),
    'soft-square-5': template('Soft square 5', 'square', {}, THICK, 'both-faces'),
  },
};

function foot(name: string, diameter: number, shank: Shank, needleX = 0): Foot {
  return { name, diameter, needleOffset: [needleX, 0], shank };
}

function template(name: string, family: string, sizes: { readonly [size: string]: number }, thickness: number, grips: Grips): Template {
  return { name, family, sizes, thickness, grips };
}
