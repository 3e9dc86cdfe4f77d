/** Ways to spoil a course structure of cmi5, and what libxml2 has to say of each. */
import { lacks, outside, type Spoiled } from './spoiled.ts';

const notExpected = (element: string, wants: string) =>
  new RegExp(`${element}'?: This element is not expected\\. Expected is (?:one of )?\\( .*${wants}`);

/** What the standard's own schema refuses. */
export const COURSES: readonly Spoiled[] = [
  {
    what: 'another namespace',
    find: / xmlns="[^"]*"/,
    instead: ' xmlns="http://www.adlnet.gov/cmi5/CourseStructure.xsd"',
    says: /No matching global declaration/,
  },
  { what: 'no namespace', find: / xmlns="[^"]*"/, instead: '', says: /No matching global declaration/ },
  {
    what: 'another root',
    find: /(<\/?)courseStructure/g,
    instead: '$1structure',
    says: /No matching global declaration/,
  },
  { what: 'no course', find: /<course .*?<\/course>/s, instead: '', says: notExpected('au', 'course') },
  { what: 'two courses', find: /(<course .*?<\/course>)/s, instead: '$1$1', says: notExpected('course', 'au') },
  {
    what: 'no unit',
    find: /<au .*<\/au>/s,
    instead: '',
    says: /courseStructure'?: Missing child element\(s\)\. Expected is .*au/,
  },
  {
    what: 'a unit before the course',
    find: /(<course .*?<\/course>)(\s*<au .*?<\/au>)/s,
    instead: '$2$1',
    says: notExpected('au', 'course'),
  },
  { what: 'a course without its id', find: /(<course) id="[^"]*"/, instead: '$1', says: lacks('id') },
  { what: 'a unit without its id', find: /(<au) id="[^"]*"/, instead: '$1', says: lacks('id') },
  {
    what: 'an id that is no address',
    find: /(<au id=)"[^"]*"/,
    instead: '$1"urn:%zz"',
    says: /'urn:%zz' is not a valid value of the atomic type/,
  },
  {
    what: 'a course without a title',
    find: /<title>.*?<\/title>/s,
    instead: '',
    says: notExpected('description', 'title'),
  },
  {
    what: 'a course without a description',
    find: /<description>.*?<\/description>/s,
    instead: '',
    says: /course'?: Missing child element\(s\)\. Expected is .*description/,
  },
  {
    what: 'a unit without a title',
    find: /(<au [^>]*>\s*)<title>.*?<\/title>/s,
    instead: '$1',
    says: notExpected('description', 'title'),
  },
  {
    what: 'a unit without a description',
    find: /(<au .*?)<description>.*?<\/description>/s,
    instead: '$1',
    says: notExpected('url', 'description'),
  },
  {
    what: 'the description before the title',
    find: /(<title>.*?<\/title>)(\s*<description>.*?<\/description>)/s,
    instead: '$2$1',
    says: notExpected('description', 'title'),
  },
  {
    what: 'two titles',
    find: /(<title>.*?<\/title>)/s,
    instead: '$1$1',
    says: notExpected('title', 'description'),
  },
  {
    what: 'a title of no language string',
    find: /<title>.*?<\/title>/s,
    instead: '<title/>',
    says: /title'?: Missing child element\(s\)\. Expected is .*langstring/,
  },
  {
    what: 'a title that is text alone',
    find: /<title>.*?<\/title>/s,
    instead: '<title>A call</title>',
    says: /title'?: Character content other than whitespace is not allowed/,
  },
  {
    what: 'a language that there cannot be',
    find: / lang="en"/,
    instead: ' lang="plain English"',
    says: /'plain English' is not a valid value of the atomic type 'xs:language'/,
  },
  {
    what: 'a part of a text marked up',
    find: /(<langstring [^>]*>)/,
    instead: '$1<b>Well:</b> ',
    says: /langstring'?: Element content is not allowed/,
  },
  {
    what: 'a unit without an address',
    find: /<url>.*?<\/url>/s,
    instead: '',
    says: /au'?: Missing child element\(s\)\. Expected is .*url/,
  },
  { what: 'an empty address', find: /<url>[^<]*/, instead: '<url>', says: /url'?: .*The value ''/ },
  {
    what: 'the address first',
    find: /(<au [^>]*>)(.*?)(<url>.*?<\/url>)/s,
    instead: '$1$3$2',
    says: notExpected('url', 'title'),
  },
  {
    what: 'no known way to move on',
    find: / moveOn="[^"]*"/,
    instead: ' moveOn="Finished"',
    says: outside('Finished'),
  },
  {
    what: 'a way to move on in small letters',
    find: / moveOn="[^"]*"/,
    instead: ' moveOn="passed"',
    says: outside('passed'),
  },
  {
    what: 'more than all of the score',
    find: / masteryScore="[^"]*"/,
    instead: ' masteryScore="1.2"',
    says: /'1\.2' is greater than the maximum value/,
  },
  {
    what: 'less than none of the score',
    find: / masteryScore="[^"]*"/,
    instead: ' masteryScore="-0.1"',
    says: /'-0\.1' is less than the minimum value/,
  },
  {
    what: 'a score in per cent',
    find: / masteryScore="[^"]*"/,
    instead: ' masteryScore="70%"',
    says: /'70%' is not a valid value/,
  },
  {
    what: 'a score with an exponent',
    find: / masteryScore="[^"]*"/,
    instead: ' masteryScore="7e-1"',
    says: /'7e-1' is not a valid value/,
  },
  { what: 'no known window', find: /="AnyWindow"/, instead: '="NewWindow"', says: outside('NewWindow') },
  {
    what: 'an attribute of no schema',
    find: /<au /,
    instead: '<au colour="red" ',
    says: /attribute 'colour' is not allowed/,
  },
  {
    what: 'a way to log in, which an earlier text had',
    find: /<au /,
    instead: '<au authenticationMethod="Basic" ',
    says: /attribute 'authenticationMethod' is not allowed/,
  },
  { what: 'an element of no schema', find: /<url>/, instead: '<hint/><url>', says: notExpected('hint', 'url') },
  {
    what: 'a kind of activity as an element',
    find: /(<\/url>)/,
    instead: '$1<activityType>simulation</activityType>',
    says: /activityType'?: This element is not expected/,
  },
];

/** What ours refuses beyond it. */
export const STRICTLY: readonly Spoiled[] = [
  { what: 'the same unit twice', find: /(<au .*?<\/au>)/s, instead: '$1$1', says: /Duplicate key-sequence/ },
  {
    what: 'a unit of the course’s own id',
    find: /(<course id=("[^"]*").*?<au id=)"[^"]*"/s,
    instead: '$1$2',
    says: /Duplicate key-sequence/,
  },
  {
    what: 'an id that is not absolute',
    find: /(<au id=)"[^"]*"/,
    instead: '$1"units/1"',
    says: /'units\/1' is not accepted by the pattern/,
  },
  {
    what: 'a kind of activity that is no address',
    find: / activityType="[^"]*"/,
    instead: ' activityType="simulation"',
    says: /'simulation' is not accepted by the pattern/,
  },
  { what: 'a text of no language', find: / lang="en"/, instead: '', says: lacks('lang') },
  { what: 'a language twice', find: / lang="es"/, instead: ' lang="en"', says: /Duplicate key-sequence \['en'\]/ },
  {
    what: 'a blank title',
    find: /(<langstring [^>]*>)[^<]*/,
    instead: '$1 ',
    says: /langstring'?: .*' ' is not accepted by the pattern/,
  },
  {
    what: 'a mastery score of five places',
    find: / masteryScore="[^"]*"/,
    instead: ' masteryScore="0.70001"',
    says: /more fractional digits than are allowed/,
  },
  {
    what: 'an address on a host',
    find: /<url>/,
    instead: '<url>https://example.org/',
    says: /'https:\S*' is not accepted by the pattern/,
  },
  {
    what: 'an address with a query',
    find: /(<\/url>)/,
    instead: '?a=b$1',
    says: /\?a=b' is not accepted by the pattern/,
  },
  { what: 'no way to move on', find: / moveOn="[^"]*"/, instead: '', says: lacks('moveOn') },
  {
    what: 'an element of another namespace',
    find: /(<\/url>)/,
    instead: '$1<own xmlns="https://example.org/own"/>',
    says: /own'?: This element is not expected/,
  },
];
