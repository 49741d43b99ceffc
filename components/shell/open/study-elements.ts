// The elements that a study is drawn with; fetched as soon as the page stands, or when a study is opened before that.
import '../../notebook/qw-asking-study.ts';
import '../../study/qw-further.ts';
import '../../study/qw-study.ts';
