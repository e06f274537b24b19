/** The names a lesson's results are kept under, beside those of the drills: of its task, and of its checks. */
export const lessonKey = (id: string): string => `lesson-${id}`;
export const checksKey = (id: string): string => `checks-${id}`;
