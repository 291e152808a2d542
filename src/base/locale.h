/* The locale of the session, as far as it matters: which letters there are and how wide they are.
 * Numbers keep their point. */
#ifndef BASE_LOCALE_H
#define BASE_LOCALE_H

/* Takes it from the environment. A login from elsewhere may name a locale that is not installed
 * here; of it only the encoding matters. */
void locale_open(void);

#endif
