import java.io.InputStream;
import java.io.Reader;
import org.w3c.dom.ls.LSInput;

/** A schema that another one imports, read from the class path. */
record Resource(String publicId, String systemId, String base, InputStream bytes) implements LSInput {
    @Override
    public InputStream getByteStream() {
        return bytes;
    }

    @Override
    public String getSystemId() {
        return systemId;
    }

    @Override
    public String getPublicId() {
        return publicId;
    }

    @Override
    public String getBaseURI() {
        return base;
    }

    @Override
    public Reader getCharacterStream() {
        return null;
    }

    @Override
    public String getStringData() {
        return null;
    }

    @Override
    public String getEncoding() {
        return null;
    }

    @Override
    public boolean getCertifiedText() {
        return false;
    }

    @Override
    public void setByteStream(InputStream ignored) {}

    @Override
    public void setSystemId(String ignored) {}

    @Override
    public void setPublicId(String ignored) {}

    @Override
    public void setBaseURI(String ignored) {}

    @Override
    public void setCharacterStream(Reader ignored) {}

    @Override
    public void setStringData(String ignored) {}

    @Override
    public void setEncoding(String ignored) {}

    @Override
    public void setCertifiedText(boolean ignored) {}
}
