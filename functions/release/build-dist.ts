/** Second half of `npm run build`: what stands beside the bundles, host by host. */
import '../bundling/third-party-file.ts';
import './package/build.ts';
import '../hosts/office/build.ts';
import '../hosts/apps-script/build.ts';
import '../hosts/onlyoffice/build.ts';
import '../hosts/libreoffice/build.ts';
import '../hosts/sql/build.ts';
import '../handbook/function-guide/build.ts';
import '../handbook/guides/build.ts';
