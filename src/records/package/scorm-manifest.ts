/** `imsmanifest.xml` of a SCORM package: one item for each call, all on the files of one page. */
import { TEXT, text } from '../limits.ts';
import { documentOf, type Element, element } from '../xml.ts';
import { type Course, courseUuid, type PackedActivity } from './course.ts';

export type ManifestLanguage = 'en' | 'es';

/** What differs between the two versions. */
interface Version {
  readonly schemaversion: string;
  readonly namespaces: Readonly<Record<string, string>>;
  readonly scormType: string;
  readonly sequencing: (of: 'course' | 'call') => readonly Element[];
}

const V12: Version = {
  schemaversion: '1.2',
  namespaces: {
    xmlns: 'http://www.imsproject.org/xsd/imscp_rootv1p1p2',
    'xmlns:adlcp': 'http://www.adlnet.org/xsd/adlcp_rootv1p2',
  },
  scormType: 'adlcp:scormtype',
  sequencing: () => [],
};

const V2004: Version = {
  schemaversion: '2004 4th Edition',
  namespaces: {
    xmlns: 'http://www.imsglobal.org/xsd/imscp_v1p1',
    'xmlns:adlcp': 'http://www.adlnet.org/xsd/adlcp_v1p3',
    'xmlns:imsss': 'http://www.imsglobal.org/xsd/imsss',
  },
  scormType: 'adlcp:scormType',
  // Free choice among the calls, one after the other where nobody chooses; and the call itself says how it ended.
  sequencing: (of) => [
    element(
      'imsss:sequencing',
      {},
      of === 'course'
        ? element('imsss:controlMode', { choice: 'true', flow: 'true' })
        : element('imsss:deliveryControls', { completionSetByContent: 'true', objectiveSetByContent: 'true' }),
    ),
  ],
};

export const manifest12 = (course: Course, language: ManifestLanguage): string => manifest(V12, course, language);
export const manifest2004 = (course: Course, language: ManifestLanguage): string => manifest(V2004, course, language);

function manifest(version: Version, course: Course, language: ManifestLanguage): string {
  const { title, activities, files } = course;
  const named = (of: Course['title']) => element('title', {}, text(TEXT.title12, of[language]));
  const item = (activity: PackedActivity) =>
    element(
      'item',
      { identifier: `item-${activity.call}`, identifierref: `call-${activity.call}`, isvisible: 'true' },
      named(activity.title),
      ...version.sequencing('call'),
    );
  const resource = ({ call, entry }: PackedActivity) =>
    element(
      'resource',
      { identifier: `call-${call}`, type: 'webcontent', [version.scormType]: 'sco', href: entry },
      element('file', { href: entry }),
      element('dependency', { identifierref: 'page' }),
    );
  return documentOf(
    element(
      'manifest',
      { identifier: `underlawn-${courseUuid(course)}`, version: '1.0', ...version.namespaces },
      element('metadata', {}, element('schema', {}, 'ADL SCORM'), element('schemaversion', {}, version.schemaversion)),
      element(
        'organizations',
        { default: 'course' },
        element(
          'organization',
          { identifier: 'course' },
          named(title),
          ...activities.map(item),
          ...version.sequencing('course'),
        ),
      ),
      element(
        'resources',
        {},
        ...activities.map(resource),
        element(
          'resource',
          { identifier: 'page', type: 'webcontent', [version.scormType]: 'asset' },
          ...files.map((href) => element('file', { href })),
        ),
      ),
    ),
  );
}
