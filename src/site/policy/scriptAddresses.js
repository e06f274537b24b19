// Under the page's policy no text becomes markup or script, and an address becomes a script's only once this has let it through
// (Trusted Types, W3C): the site's own worker files and no others.
globalThis.trustedTypes?.createPolicy('default', {
	createScriptURL(address) {
		const { origin, pathname } = new URL(address, location.href);
		const isOwn = origin === location.origin && /^\/(?:sw|_astro\/[\w.-]+)\.js$/.test(pathname);
		return isOwn ? address : null;
	},
	// an island empties its place so before it draws; what is in no text harms nobody
	createHTML: (markup) => (markup === '' ? '' : null),
});
