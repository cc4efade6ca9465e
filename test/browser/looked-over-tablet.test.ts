// See looked-over.ts.

import { lookedOver } from './looked-over.ts';

lookedOver(1);
