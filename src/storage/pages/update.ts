/** How tabs tell each other that a new version has been asked for. By itself, as all that stands in a page's own script is. */
export const updateChannel = (): BroadcastChannel => new BroadcastChannel('prep-bay.update');
