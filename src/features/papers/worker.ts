import { serve } from '../../asking/index.ts';
import { papersWork } from './work.ts';

serve(papersWork);
