/** Water in the tanks by season, degC: buried, it swings less than the air, and stands still for a what-if (convention). */
export const SEASONS = { mild: 20, cold: 8, hot: 28 } as const;
export type SeasonId = keyof typeof SEASONS;
export const SEASON_IDS = ['mild', 'cold', 'hot'] as const satisfies readonly SeasonId[];
