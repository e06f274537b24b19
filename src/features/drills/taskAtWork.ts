/** Fetches what shows and marks a task: its bench, its marks, its hints. */
export const taskAtWork = () => import('./OnTask.tsx');
