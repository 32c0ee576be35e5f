/** Second half of `npm run build`: what stands beside the bundles, host by host. */
import '../bundling/third-party-file.ts';
import './library/build.ts';
import './office/build.ts';
import './apps-script/build.ts';
import './onlyoffice/build.ts';
import './libreoffice/build.ts';
import './sql/build.ts';
import '../handbook/function-guide/build.ts';
import '../handbook/guides/build.ts';
