import java.io.*
import java.nio.file.*
import java.time.*
import java.util.*
import java.util.function.*
import java.util.stream.*
import javax.measure.*
import javax.measure.quantity.*
import dev.thinair.units.*
import dev.thinair.working.*
import dev.thinair.psychro.*
import dev.thinair.psychro.kernel.*
import dev.thinair.altitude.*
import dev.thinair.altitude.kernel.*
import dev.thinair.loads.*
import dev.thinair.loads.kernel.*
import dev.thinair.ducts.*
import dev.thinair.ducts.kernel.*
import dev.thinair.cycling.*
import dev.thinair.cycling.kernel.*
import dev.thinair.examples.job.Job
import dev.thinair.examples.study.LinePicture
import dev.thinair.examples.study.Sweep
import dev.thinair.examples.study.Table
import static dev.thinair.units.Units.*
import static dev.thinair.examples.shell.Shell.*
welcome()
