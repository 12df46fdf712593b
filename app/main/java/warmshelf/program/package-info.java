/**
 * What members' own scripts read and send: JSON over HTTP under {@code /api/v1}, described by {@code templates/program/openapi.json},
 * and the page on which people make and end the tokens by which scripts come in.
 *
 * <p>{@code ProgramDoorPages} lets them in, by a token alone and never by a browser's cookie, and sees to it that what is sent twice
 * counts once: {@code ProgramAnswerStore} keeps the answer under the key that came along. What a token opens is what its scopes say,
 * and never more than its member may at that moment: the role is read with each request, and which rows somebody sees is decided by
 * {@code exchange.TakenRowsStore}, as for the tables they take out. What is sent is judged where a page's or a phone's is:
 * {@code check.SentEntries}, {@code frost.garden.NightForm}. A no is problem details by {@code web.ProblemDetails}.
 */
package warmshelf.program;
