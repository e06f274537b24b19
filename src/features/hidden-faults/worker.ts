import { serve } from '../../asking/index.ts';
import { makeHiddenWork } from './work.ts';

serve(makeHiddenWork());
