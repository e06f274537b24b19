/** Seconds and shares as the finder says them. */
export const amountWords = {
	seconds: (n: number) => `${n} s`,
	minutes: (minutes: number, seconds: number) => (seconds > 0 ? `${minutes} min ${seconds} s` : `${minutes} min`),
	about: (time: string) => `about ${time}`,
	percent: (n: number) => `${n} %`,
	hardly: 'under 1 %',
} as const;

/** A title with what follows it: a question has its mark already. */
export const led = (title: string, mark: ':' | '.'): string => (title.endsWith('?') ? title : `${title}${mark}`);
