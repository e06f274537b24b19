/** The drawers of a bench, by id. */
export const TOOL_IDS = ['desk', 'cables', 'remote', 'sound', 'breaker', 'clock', 'log'] as const;
export type ToolId = (typeof TOOL_IDS)[number];
