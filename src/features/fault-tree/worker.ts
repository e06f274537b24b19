import { serve } from '../../asking/index.ts';
import { casefileWork } from './work.ts';

serve(casefileWork);
