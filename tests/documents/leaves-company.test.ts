import { testLeaves } from '../support/leaf-tests.ts';
import { schemaLeaves } from '../support/schema-leaves.ts';

testLeaves('company', schemaLeaves('company'));
