package farwatt.file;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What tells one state of a file from another.
 *
 * @param hex SHA-256 of its bytes, "" for no file at all
 */
public record Fingerprint(String hex) {
    /** Of a file that is not there. */
    public static final Fingerprint NONE = new Fingerprint("");

    public static Fingerprint of(byte[] bytes) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
            return new Fingerprint(HexFormat.of().formatHex(hash));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
