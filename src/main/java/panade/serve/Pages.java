package panade.serve;

import java.util.Map;

/** What is served. Both may be asked from several threads at once. */
public interface Pages {
    /**
     * What stands at a path.
     *
     * @param path below the key, without a slash in front; empty for the page itself
     */
    Reply get(String path);

    /**
     * The answer to a form.
     *
     * @param form its fields; a name that comes twice has its last value
     */
    Reply post(String path, Map<String, String> form);
}
