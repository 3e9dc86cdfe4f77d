import { productTests } from './product.ts';

productTests('u2');
