/** Properties are tried with the same values in every run: else a mutant would live or die by chance. */
import fc from 'fast-check';

fc.configureGlobal({seed: 1});
