import { productTests } from './product.ts';

productTests('u3');
