import { PHONES, phoneWord } from './dictionary';

/**
 * A grammar of any phones in any order: how well a stretch of sound can be explained at all, against
 * which a phrase's own score is held.
 */
export const PHONE_LOOP = `#JSGF V1.0;
grammar phones;
public <said> = (${PHONES.map(phoneWord).join(' | ')})+;
`;
