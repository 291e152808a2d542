/* The full-screen editor. */
#ifndef SCREEN_SCREEN_H
#define SCREEN_SCREEN_H

/* Opens the plot at path, or offers to begin it, and lets people draw until they leave. Returns the
 * exit status: 0, or 2 after a message on standard error. A signal that ends the session ends the
 * process. */
int screen_run(const char *path);

#endif
