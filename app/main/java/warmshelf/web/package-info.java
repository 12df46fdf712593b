/**
 * What all pages share: the server, who may what, forms sent twice, the frame of a page, how answers are packed.
 *
 * <p><b>Sent twice.</b> Each form carries a random name ({@code csrf} in {@code parts/forms.peb}). {@code
 * SubmissionGuard} makes a fingerprint of it and of all that was typed; the first {@code Audit.write} of the request
 * keeps it in {@code submission} within the same transaction, so whatever is added counts once, on two nodes too.
 * The second sending gets the first one's answer. The same name with other content is another form (the browser's
 * Back).
 */
package warmshelf.web;
