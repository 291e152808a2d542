/* Texts between UTF-8, in which the plot holds them, and the encoding of the terminal's locale. */
#ifndef SCREEN_ENCODE_H
#define SCREEN_ENCODE_H

/* New memory; what the locale cannot show becomes ?. */
char *encode_for_locale(const char *utf8);
/* New memory; what is no character in the locale is left out. */
char *encode_from_locale(const char *local);

#endif
