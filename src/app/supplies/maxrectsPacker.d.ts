/**
 * The package says that its main file is a module, but that file hands nothing out; the module beside it does, in Node, in tests
 * and in the bundler alike, and is described by the package's own types.
 */
declare module "maxrects-packer/dist/maxrects-packer.mjs" {
  export { type Bin, type IRectangle, MaxRectsPacker, PACKING_LOGIC, Rectangle } from "maxrects-packer/dist/index";
}
