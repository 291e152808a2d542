/* Standard error: what went wrong, a line at a time. Nothing that came from outside reaches it in
 * any other way. */
#ifndef BASE_COMPLAIN_H
#define BASE_COMPLAIN_H

/* One line, "parterre: " before it, spelled for the locale (base/spell.h): file names, options and
 * messages of the system may be put into it as they are. Returns 2, the exit status of an error. */
int complain(const char *format, ...) __attribute__((format(printf, 1, 2)));

#endif
