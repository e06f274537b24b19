// what is needed before the first paint: the look, and whether somebody comes back to something kept
try {
	const root = document.documentElement;
	const kept = localStorage.getItem('prep-bay.theme');
	if (kept === 'light' || kept === 'dark' || kept === 'backstage') root.dataset.theme = kept;
	const keys = Object.keys(localStorage);
	if (keys.some((key) => /^prep-bay\.(rig\.[0-9a-f]{16}|progress|review|papers\.draft)$/.test(key)))
		root.dataset.returns = '';
} catch {
	// no store, no choice: the system's theme stands
}
