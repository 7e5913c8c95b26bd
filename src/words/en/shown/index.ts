import { cautions } from './cautions';
import { commands, questions } from './commands';
import { keys, letGo } from './keys';
import { learning } from './learning';
import { reminder } from './reminders';
import { holdWillDo, stageName, stages } from './stages';
import { unjudged, verdicts } from './verdicts';

/** Strings of the screens, by the thing they name. */
export const shown = {
  cautions,
  commands,
  questions,
  keys,
  learning,
  letGo,
  reminder,
  stages,
  stageName,
  holdWillDo,
  verdicts,
  unjudged,
};
