/// <reference types="custom-functions-runtime" />
import { catalogue } from '../../catalogue/index.ts';
import { adapt } from './adapter.ts';

/** Excel loads this file alone, into a runtime without pages, storage or network of ours. */
for (const declaration of catalogue.all()) {
  CustomFunctions.associate(declaration.id, adapt(declaration, CustomFunctions));
}
