/** The course platforms that a call is packed for, and how it is taken there. */
export const PLATFORMS = ['scorm12', 'scorm2004', 'cmi5'] as const;
export type Platform = (typeof PLATFORMS)[number];

export const PACKED_MODES = ['graded', 'practice'] as const;
export type PackedMode = (typeof PACKED_MODES)[number];
