import { useEffect, useState } from 'preact/hooks';

/** Whether the person's device asks for less motion; follows it when that changes. */
export function useLessMotion(): boolean {
	const [less, set] = useState(() => matchMedia('(prefers-reduced-motion: reduce)').matches);
	useEffect(() => {
		const query = matchMedia('(prefers-reduced-motion: reduce)');
		const hear = () => set(query.matches);
		hear();
		query.addEventListener('change', hear);
		return () => query.removeEventListener('change', hear);
	}, []);
	return less;
}
