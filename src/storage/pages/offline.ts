/** How the service worker tells pages how much of the site is kept for use with no network. By itself, as all that stands in a page's own script is. */
export const offlineChannel = (): BroadcastChannel => new BroadcastChannel('prep-bay.kept');
