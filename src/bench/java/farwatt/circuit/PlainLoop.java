package farwatt.circuit;

/** The arithmetic of one source, one regulated switch and its devices, written out for just that: what speed costs. */
final class PlainLoop {

    private PlainLoop() {}

    static void solve(FlatNetwork in, FlatState out) {
        double sent = 0;
        double lost = 0;
        for (int i = 2; i < in.count; i++) {
            double watts = run(in, out, i, in.volts[1], in.draw[i]);
            double next = sent + watts;
            double added = next - sent;
            lost += (sent - (next - added)) + (watts - added);
            sent = next;
            out.nodeSent[i] = 0;
            out.nodeReceived[i] = in.draw[i];
            none(out, i);
        }
        out.nodeSent[1] = sent + lost;
        out.nodeReceived[1] = in.draw[1] + out.nodeSent[1] / in.efficiency[1];
        out.nodeSent[0] = run(in, out, 1, in.volts[0], out.nodeReceived[1]);
        none(out, 0);
        out.available[0] = in.budget[0];
        out.reserve[0] = in.budget[0] - out.nodeSent[0];
        limit(in, out);
    }

    private static double run(FlatNetwork in, FlatState out, int i, double volts, double watts) {
        double alpha = in.alpha[i];
        double alphaCord = in.alphaCord[i];
        double warm = in.heat[i];
        double base = in.ambient[i] - 20 + in.othersRise[i];
        double room = 1 - in.othersRise[i] * in.alphaOthers[i];
        double pull = warm * alpha;
        double constant =
                in.cable[i] * (room + alpha * base) + in.cord[i] * (room + alphaCord * base) + in.fixed[i] * room;
        double linear = in.cord[i] * (alphaCord * warm - pull) - in.fixed[i] * pull;
        double amps = amps(volts, watts, room, pull, constant, linear);
        double square = amps * amps;
        double feedback = 1 / (room - pull * square);
        double ohms = (constant + linear * square) * feedback;
        double celsius = 20 + (base + warm * square) * feedback;
        double far = volts - amps * ohms;
        out.amps[i] = amps;
        out.voltsNear[i] = volts;
        out.voltsFar[i] = far;
        out.ohms[i] = ohms;
        out.temp[i] = celsius;
        out.rise[i] = celsius - in.ambient[i];
        out.loss[i] = square * ohms;
        out.sent[i] = volts * amps;
        out.received[i] = far * amps;
        out.cliffShare[i] = 4 * ohms * out.received[i] / (volts * volts);
        return volts * amps;
    }

    private static double amps(double volts, double watts, double room, double pull, double constant, double linear) {
        double perRoom = 1 / room;
        double perVolt = 1 / volts;
        double least = constant * perRoom;
        double tangent = (linear + pull * least) * perRoom;
        double amps = watts * perVolt;
        double without = amps * (1 + least * amps * perVolt);
        double share = (least + tangent * without * without) * amps * perVolt;
        amps *= 1 + share * (1 + share * (2 + share * 5));
        while (true) {
            double square = amps * amps;
            double under = room - pull * square;
            double over = constant + linear * square;
            double missing = (watts - volts * amps) * under + square * over;
            double slope = volts * under * under - 2 * amps * ((over + linear * square) * under + pull * square * over);
            if (!(slope > 0)) {
                throw new IllegalStateException("no operating point");
            }
            if (missing <= 0x1p-51 * volts * amps * under) {
                return amps;
            }
            double step = missing * under / slope;
            amps += step;
            if (4 * over * step * step <= 0x1p-54 * amps * slope * under) {
                return amps;
            }
        }
    }

    private static void none(FlatState out, int i) {
        out.status[i] = FlatState.OK;
        out.boundBy[i] = FlatState.NONE;
        out.mostAmps[i] = Double.NaN;
        out.receivable[i] = Double.NaN;
        out.available[i] = Double.NaN;
        out.reserve[i] = Double.NaN;
    }

    private static void limit(FlatNetwork in, FlatState out) {
        double volts = in.volts[0];
        double warm = in.heat[1];
        double base = in.ambient[1] - 20 + in.othersRise[1];
        double room = 1 - in.othersRise[1] * in.alphaOthers[1];
        double pull = warm * in.alpha[1];
        double left = Math.max(0, out.available[0] - (out.nodeSent[0] - out.sent[1]));
        double amps = Math.min(Math.min(in.portWatts[1], left) / volts, in.wireAmps[1]);
        double square = amps * amps;
        double celsius = (base + warm * square) / (room - pull * square);
        double ohms =
                in.cable[1] * (1 + in.alpha[1] * celsius) + in.cord[1] * (1 + in.alphaCord[1] * celsius) + in.fixed[1];
        if (amps * ohms > Math.min(volts / 2, volts - in.floor[1]) || celsius > 180) {
            throw new IllegalStateException("not bound by the port");
        }
        double brings = amps * (volts - amps * ohms);
        double beyondOwn = in.efficiency[1] * (Math.min(brings, in.right[1]) - in.draw[1]);
        out.mostAmps[1] = amps;
        out.receivable[1] = brings;
        out.available[1] = Math.max(0, Math.min(in.budget[1], beyondOwn));
        out.boundBy[1] = FlatState.PORT;
        out.status[1] = FlatState.OK;
        out.reserve[1] = out.available[1] - out.nodeSent[1];
    }
}
