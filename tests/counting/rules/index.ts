import { c01 } from './c01';
import { c02 } from './c02';
import { c03 } from './c03';
import { c04 } from './c04';
import { c05 } from './c05';
import { c06 } from './c06';
import { c07 } from './c07';
import { c08 } from './c08';
import { c09 } from './c09';
import { c11 } from './c11';
import { c12 } from './c12';
import type { Rule } from './row';

/** Every rule that counting itself proves, in order. */
export const rules: readonly Rule[] = [c01, c02, c03, c04, c05, c06, c07, c08, c09, c11, c12];
