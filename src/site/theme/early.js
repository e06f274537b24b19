try {
	const kept = localStorage.getItem('prep-bay.theme');
	if (kept === 'light' || kept === 'dark' || kept === 'backstage') document.documentElement.dataset.theme = kept;
} catch {
	// no store, no choice: the system's theme stands
}
