/* Lines of text as a page has them. */
#ifndef SUPPORT_LINES_H
#define SUPPORT_LINES_H

/* Fails the test, naming it, unless each line ends, takes 80 columns at most and has no blank at
 * its end. Columns are those of the C library: call setlocale with a UTF-8 locale first. */
void lines_check(const char *text, const char *what);

#endif
