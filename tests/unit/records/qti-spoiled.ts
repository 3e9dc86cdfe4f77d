/** Ways to spoil an item or a manifest of either version, and what libxml2 has to say of each. */
import type { Question } from '../../../src/records/qti/question.ts';

export interface Spoiled {
  readonly what: string;
  /** The kind of question whose item is spoiled, where it is one. */
  readonly of?: Question['ask']['kind'];
  readonly find: RegExp;
  readonly instead: string;
  readonly says: RegExp;
}

const outside = (value: string) => new RegExp(`'${value}' is not an element of the set`);
const lacks = (attribute: string) => new RegExp(`attribute '${attribute}' is required`);
const unmatched = (value: string) => new RegExp(`No match found for key-sequence \\['${value}'\\]`);

/** What the standard's own schema refuses. */
export const ITEMS: readonly Spoiled[] = [
  {
    what: 'a response without its identifier',
    find: / identifier="RESPONSE" card/,
    instead: ' card',
    says: lacks('identifier'),
  },
  { what: 'a cardinality that there is not', find: /="single"/, instead: '="sole"', says: outside('sole') },
  { what: 'a base type that there is not', of: 'number', find: /="float"/, instead: '="real"', says: outside('real') },
  { what: 'a constant of no base type', of: 'number', find: /="float">/, instead: '="real">', says: outside('real') },
  { what: 'an item without a title', find: / title="[^"]*"/, instead: '', says: lacks('title') },
  {
    what: 'an item that does not tell of its time',
    find: / time-?[dD]ependent="false"/,
    instead: '',
    says: lacks('time-?[dD]ependent'),
  },
  {
    what: 'an attribute of no schema',
    find: /<(qti-item-body|itemBody)/,
    instead: '<$1 colour="red"',
    says: /attribute 'colour' is not allowed/,
  },
  {
    what: 'an element of no schema',
    find: /<ul>/,
    instead: '<hint/><ul>',
    says: /hint'?: This element is not expected/,
  },
  {
    what: 'the response after the outcomes',
    find: /(\s*<(\S*response-?[dD]eclaration).*?<\/\2>)(.*?)(\s*<\S*item)/s,
    instead: '$3$1$4',
    says: /[rR]esponse-?[dD]eclaration'?: This element is not expected/,
  },
  {
    what: 'no choice to choose',
    find: /\s*<(qti-simple-choice|simpleChoice).*<\/\1>/s,
    instead: '',
    says: /[iI]nteraction'?: Missing child element/,
  },
  {
    what: 'a comparison of three',
    find: /(<\S*correct identifier="RESPONSE"\/>)/,
    instead: '$1$1',
    says: /correct'?: This element is not expected/,
  },
  {
    what: 'a comparison of one',
    find: /<\S*correct identifier="RESPONSE"\/>/,
    instead: '',
    says: /match'?: Missing child element/,
  },
  {
    what: 'a condition without its first part',
    find: /<(\S*response-?[iI]f)>.*<\/\1>/s,
    instead: '',
    says: /Expected is .*response-?[iI]f/,
  },
  { what: 'a rubric for nobody', find: / view="[^"]*"/, instead: '', says: lacks('view') },
  { what: 'a rubric for no known reader', find: / view="[^"]*"/, instead: ' view="scorer janitor"', says: /'janitor'/ },
  { what: 'feedback neither shown nor hidden', find: /="show"/, instead: '="never"', says: outside('never') },
  {
    what: 'feedback on no outcome',
    find: / outcome-?[iI]dentifier="FEEDBACK"/,
    instead: '',
    says: lacks('outcome-?[iI]dentifier'),
  },
  {
    what: 'an answer that is no name',
    find: / identifier="answer-/,
    instead: ' identifier="7 answer-',
    says: /not a valid value of the atomic type 'xs:NCName'/,
  },
  {
    what: 'a field of less than no length',
    of: 'number',
    find: /(expected-?[lL]ength)="\d+"/,
    instead: '$1="-1"',
    says: /'-1' is not a valid value/,
  },
  { what: 'no known way to be near', of: 'number', find: /="absolute"/, instead: '="about"', says: outside('about') },
  { what: 'a place without its number', of: 'order', find: / n="1"/, instead: '', says: lacks('n') },
];

/** What ours refuses beyond it. */
export const STRICTLY: readonly Spoiled[] = [
  {
    what: 'a question of a response that is not declared',
    find: /(response-?[iI]dentifier)="RESPONSE"/,
    instead: '$1="OTHER"',
    says: unmatched('OTHER'),
  },
  {
    what: 'a look at a response that is not declared',
    of: 'number',
    find: /(<\S*variable identifier)="RESPONSE"/,
    instead: '$1="OTHER"',
    says: unmatched('OTHER'),
  },
  {
    what: 'an outcome that is set and not declared',
    find: /(set-?[oO]utcome-?[vV]alue identifier)="SCORE"/,
    instead: '$1="MARK"',
    says: unmatched('MARK'),
  },
  {
    what: 'feedback on an outcome that is not declared',
    find: /="FEEDBACK" (show-?[hH]ide)/,
    instead: '="OTHER" $1',
    says: unmatched('OTHER'),
  },
  {
    what: 'the same answer twice',
    find: /(<(qti-simple-choice|simpleChoice) .*?<\/\2>)/,
    instead: '$1$1',
    says: /Duplicate key-sequence/,
  },
  {
    what: 'a tolerance in words',
    of: 'number',
    find: /tolerance="[^"]*"/,
    instead: 'tolerance="a little"',
    says: /'a little' is not a valid value/,
  },
];

/** What 3.0 asks for and 2.2 does not. */
export const ITEMS_OF_3: readonly Spoiled[] = [
  { what: 'a rubric without its use', find: / use="scoring"/, instead: '', says: lacks('use') },
  { what: 'a rubric of no known use', find: / use="scoring"/, instead: ' use="fun"', says: outside('fun') },
  {
    what: 'a rubric whose words stand in no body',
    find: /(<qti-rubric-block [^>]*>)\s*<qti-content-body>(.*?)<\/qti-content-body>/s,
    instead: '$1$2',
    says: /p'?: This element is not expected. Expected is .*qti-content-body/,
  },
  {
    what: 'feedback whose words stand in no body',
    find: /(<qti-modal-feedback [^>]*>)\s*<qti-content-body>(.*?)<\/qti-content-body>/s,
    instead: '$1$2',
    says: /p'?: This element is not expected. Expected is .*qti-content-body/,
  },
];

export const MANIFESTS: readonly Spoiled[] = [
  { what: 'no metadata', find: /<metadata>.*<\/metadata>/s, instead: '', says: /Expected is .*metadata/ },
  { what: 'no organizations', find: /<organizations\/>/, instead: '', says: /Expected is .*organizations/ },
  {
    what: 'an organization',
    find: /<organizations\/>/,
    instead: '<organizations><organization/></organizations>',
    says: /organizations'?: Element content is not allowed/,
  },
  {
    what: 'the resources first',
    find: /(<organizations\/>)(.*)(<\/manifest>)/s,
    instead: '$2$1$3',
    says: /resources'?: This element is not expected/,
  },
  { what: 'no known schema', find: /<schema>[^<]*/, instead: '<schema>Quiz', says: outside('Quiz') },
  { what: 'another version', find: /<schemaversion>[^<]*/, instead: '<schemaversion>9', says: outside('9') },
  { what: 'no known kind of resource', find: / type="[^"]*"/, instead: ' type="quiz"', says: outside('quiz') },
  { what: 'a resource without its kind', find: / type="[^"]*"/, instead: '', says: lacks('type') },
  {
    what: 'a resource without its identifier',
    find: /(<resource) identifier="[^"]*"/,
    instead: '$1',
    says: lacks('identifier'),
  },
  {
    what: 'the same resource twice',
    find: /(<resource .*?<\/resource>)/s,
    instead: '$1$1',
    says: /not a valid value of the atomic type 'xs:ID'/,
  },
  { what: 'a file that lies nowhere', find: /<file href="[^"]*"/, instead: '<file', says: lacks('href') },
];

export const MANIFESTS_OF_3: readonly Spoiled[] = [
  { what: 'a resource without a file', find: /<file [^>]*>/, instead: '', says: /resource'?: Missing child element/ },
];
