/** A coordinator's decisions on single requests and stays: placing, refusing, moving, undoing, freeing; a mat's set-points. */
package warmshelf.placing;
