package panade.assemble;

import java.util.List;
import panade.domain.origin.Remark;
import panade.result.RemarkLine;

/** Makes the remarks of a result. */
public final class RemarkLines {
    private RemarkLines() {}

    /** Remarks, in their order. */
    public static List<RemarkLine> of(List<Remark> remarks) {
        return remarks.stream()
                .map(remark -> new RemarkLine(
                        remark.path(),
                        remark.file(),
                        remark.origin().line(),
                        remark.text(),
                        remark.origin().place()))
                .toList();
    }
}
