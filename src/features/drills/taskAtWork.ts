/** Fetches what shows and marks a task: its bench, its marks, its hints. In a file of its own: a lesson's bench has no use for the page of drills. */
export const taskAtWork = () => import('./SetTask.tsx');
