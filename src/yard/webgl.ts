/** What only WebGL needs. In a file of its own, so that who draws on a 2D canvas does not fetch the shader renderers. */
import 'pixi.js/unsafe-eval';
import { GlLimitsSystem } from 'pixi.js';

// The shader that batches sixteen textures is a chain of sixteen branches; four are plenty for a few dozen cels.
const contextChange = GlLimitsSystem.prototype.contextChange;
GlLimitsSystem.prototype.contextChange = function fewTextures(this: GlLimitsSystem): void {
  contextChange.call(this);
  this.maxBatchableTextures = Math.min(4, this.maxBatchableTextures);
};
