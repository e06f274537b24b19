/** The keys of a panel that obeys no law of its own: those of the first two fixtures. */
export const TREE_KEYS = ['back', 'down', 'up', 'set'] as const;
