Console.WriteLine("payday");
